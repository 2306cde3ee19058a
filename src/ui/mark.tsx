// The mark, in the ink of the page: a horn's arcs over a level line of liquid, turned over below it.

export function Mark() {
  return (
    <svg viewBox="76 60 360 392" aria-hidden="true" focusable="false">
      <clipPath id="mark-air">
        <path d="M84 68h344v240H84z" />
      </clipPath>
      <clipPath id="mark-liquid">
        <path d="M84 307h344v61a76 76 0 0 1-76 76H160a76 76 0 0 1-76-76z" />
      </clipPath>
      <path clip-path="url(#mark-liquid)" fill="currentColor" d="M0 0h512v512H0z" />
      <g clip-path="url(#mark-air)" fill="none" stroke="currentColor" stroke-width="38">
        <circle cx="84" cy="206" r="60" fill="currentColor" stroke="none" />
        <Arcs />
      </g>
      <g clip-path="url(#mark-liquid)" fill="none" stroke="var(--paper)" stroke-width="17">
        <Arcs />
      </g>
    </svg>
  );
}

function Arcs() {
  return [138, 222, 306].map((radius) => <circle key={radius} cx="84" cy="206" r={radius} />);
}
