// What the fields of the development are called in Italian, by the pattern of their paths, and why they are
// asked.

export const fields = {
  language: { label: "La voce parla" },
  title: { label: "Nome di questa scheda" },
  "films[].label": { label: "Pellicola" },
  "films[].size": { label: "Formato" },
  "films[].count": { label: "Quante" },
  "films[].boxSpeed": { label: "ISO sulla scatola" },
  "films[].exposureIndex": {
    label: "Esposta a",
    why: "La sensibilità impostata sull’esposimetro. Se resta vuoto vale quella sulla scatola. Tutte le pellicole in una tank hanno un tempo solo, quindi la sensibilità dovrebbe essere la stessa.",
  },
  "developer.label": { label: "Rivelatore" },
  "developer.dilution": {
    label: "Diluizione",
    why: "Parti di stock, poi parti d’acqua: 1+3 è una parte di stock e tre d’acqua. «stock» è lo stock non diluito. 1:3 non si accetta, perché c’è chi lo legge in un modo e chi nell’altro.",
  },
  "developer.leaflet[].temperature": { label: "Temperatura" },
  "developer.leaflet[].time": { label: "Tempo" },
  "developer.leaflet[].exposureIndex": { label: "Se esposta a" },
  "developer.temperature": {
    label: "Ora nel bagno pronto",
    why: "Quello che segna il termometro proprio nel bagno, appena prima di usarlo. Il tempo si calcola per questa temperatura.",
  },
  "developer.perDegree": {
    label: "Cambio per °C",
    why: "k in tempo × e^(−k × °C), per un foglietto con una riga sola. Se resta vuoto vale 0,099.",
  },
  "developer.perStop.pull": {
    label: "Tempo in meno per stop in più, %",
    why: "Per ogni stop di sovraesposizione. Se resta vuoto vale 10.",
  },
  "developer.perStop.push": {
    label: "Tempo in più per stop in meno, %",
    why: "Per ogni stop di sottoesposizione. Se resta vuoto vale 40.",
  },
  "developer.stockPerFilm": {
    label: "Stock minimo per pellicola",
    why: "Quanto ne consumano 80 pollici quadrati: una 135-36, una 120 o quattro 4×5 in. Lo dice la scheda tecnica del produttore. Se resta vuoto, nessuno lo controlla.",
  },
  "developer.filmsBefore": { label: "Pellicole già trattate" },
  "developer.perFilmBefore": { label: "Tempo in più per ognuna, %" },
  "tank.method": { label: "Metodo" },
  "tank.volume": { label: "Per coprire la pellicola" },
  "tank.pourIn": {
    label: "Si riempie in",
    why: "Misura il tuo tempo con l’acqua. Il cronometro si regola su quello.",
  },
  "tank.pourOut": { label: "Si svuota in" },
  "tank.handover": { label: "Da vuota al bagno seguente" },
  "tank.timeFactor": {
    label: "Fattore sul tempo",
    why: "Il tempo si moltiplica per questo, secondo il metodo. Se resta vuoto vale 1, o 0,85 per un tamburo.",
  },
  "tank.room": {
    label: "La stanza",
    why: "La tank va verso la temperatura della stanza. Con questa e con il tempo di metà strada, la risposta ne tiene conto.",
  },
  "tank.halfway": {
    label: "A metà strada in",
    why: "I minuti in cui una tank piena d’acqua fa metà strada dalla sua temperatura a quella della stanza.",
  },
  "agitation.first": { label: "All’inizio, senza pausa" },
  "agitation.every": { label: "Poi ogni" },
  "agitation.for": {
    label: "Per",
    why: "Con 0 il bagno resta a riposo; se dura quanto «Poi ogni», o di più, non ci si ferma mai.",
  },
  "agitation.perInversion": { label: "Capovolta e tornata in" },
  "agitation.taps": { label: "Colpi ogni volta" },
  "clock.starts": { label: "Il cronometro parte" },
  "clock.ends": { label: "Il tempo finisce" },
  "baths.*.use": { label: "Si usa" },
  "baths.*.time": { label: "Tempo" },
  "baths.*.temperature": { label: "Temperatura" },
  "baths.*.agitation.first": { label: "All’inizio, senza pausa" },
  "baths.*.agitation.every": { label: "Poi ogni" },
  "baths.*.agitation.for": { label: "Per" },
  "baths.*.agitation.perInversion": { label: "Capovolta e tornata in" },
  "baths.*.agitation.taps": { label: "Colpi ogni volta" },
  "baths.*.afterwards": { label: "Dopo l’uso va" },
  "baths.*.fills": {
    label: "A ricambi d’acqua",
    why: "Al posto di un tempo: i capovolgimenti in ogni ricambio d’acqua pulita, come 5, 10, 20.",
  },
  darkWait: {
    label: "Attesa al buio",
    why: "Per cercare la luce prima di estrarre la pellicola. Vuoto vale 3:00, come d’uso; 0:00 la toglie. Agli occhi serve mezz’ora per vedere tutto.",
  },
  loading: { label: "La pellicola" },
  "voice.detail": { label: "Quanto parla" },
  "voice.rate": {
    label: "Ritmo",
    why: "1 è come è registrata; 0,8 è il più lento, 1,6 il più veloce.",
  },
};
