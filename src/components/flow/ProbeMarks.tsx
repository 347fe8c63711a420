export type Place = readonly [x: number, y: number];

/** The two probes on a drawing: red drops onto its place from above, black comes up from below. */
export function ProbeMarks({ red, black }: { readonly red: Place; readonly black: Place }) {
  return (
    <>
      <g class="probe-red" font-size="17" font-weight="700">
        <path d={`M${red[0] + 10} 8L${red[0]} ${red[1] - 6}`} stroke-width="5" stroke-linecap="round" />
        <circle cx={red[0]} cy={red[1]} r="7" />
        <text x={red[0] + 18} y="17">
          red
        </text>
      </g>
      <g class="probe-black" font-size="17" font-weight="700">
        <path d={`M${black[0] + 8} 182L${black[0]} ${black[1] + 6}`} stroke-width="5" stroke-linecap="round" />
        <circle cx={black[0]} cy={black[1]} r="7" />
        <text x={black[0] + 16} y="186">
          black
        </text>
      </g>
    </>
  );
}
