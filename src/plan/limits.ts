// Limits of the trade that both a rule and its message name. Alone, so that neither has to know the other.

/** Seconds under which development is uneven; common practice. */
export const evenFrom = 300;

/** °C between developer and another bath that gelatin bears; common practice. */
export const gentleStep = 3;
