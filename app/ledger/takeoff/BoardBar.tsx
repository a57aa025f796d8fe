import { type CutBoard, formatShort, say, type Units } from "../../../src/index.ts";

const BAR_HEIGHT = 18;
const BAR_WIDTH = 260;
/** Letters of the bar are about this wide each; a piece with less room has its length said below. */
const LETTER = 5.6;
const LETTER_ROOM = 6;

interface Props {
  readonly cut: CutBoard;
  /** The longest board of the plan, mm: all are drawn to its scale. */
  readonly longest: number;
  readonly units: Units;
}

/** One board to scale with its pieces, each with its length in it, or all lengths under it where one has no room. */
export function BoardBar({ cut, longest, units }: Props) {
  const scale = BAR_WIDTH / longest;
  const label = (mm: number) => formatShort(mm, units);
  const lengths = cut.pieces.map(({ length }) => label(length));
  const words = say`${lengths.join(", ")}; left over ${label(cut.offcut)}`;
  const lettered = cut.pieces.every(
    ({ length }, i) => (lengths[i] ?? "").length * LETTER + LETTER_ROOM <= length * scale,
  );
  return (
    <span className="board-row">
      <svg
        className="board-bar"
        viewBox={`-1 -1 ${BAR_WIDTH + 2} ${BAR_HEIGHT + 2}`}
        role="img"
        aria-label={words}
      >
        <rect width={cut.stock.length * scale} height={BAR_HEIGHT} className="offcut" />
        {placed(cut).map(({ key, from, length }) => (
          <g key={key} transform={`translate(${from * scale} 0)`}>
            <rect width={length * scale} height={BAR_HEIGHT} className="piece" />
            {lettered ? (
              <text x={(length * scale) / 2} y={BAR_HEIGHT / 2 + 4}>
                {label(length)}
              </text>
            ) : null}
          </g>
        ))}
      </svg>
      {lettered ? null : (
        <small className="cut-lengths" aria-hidden="true">
          {counted(lengths).join(" + ")}
        </small>
      )}
    </span>
  );
}

/** Lengths alike that follow one another, counted: "10 × 11 in". */
function counted(lengths: readonly string[]): readonly string[] {
  const runs: { words: string; count: number }[] = [];
  for (const words of lengths) {
    const last = runs.at(-1);
    if (last?.words === words) last.count += 1;
    else runs.push({ words, count: 1 });
  }
  return runs.map(({ words, count }) => (count === 1 ? words : `${count} × ${words}`));
}

/** Pieces from the board's start on; the cuts between them are thinner than a line of the drawing. */
function placed({
  pieces,
}: CutBoard): readonly { readonly key: string; readonly from: number; readonly length: number }[] {
  let from = 0;
  return pieces.map(({ length }, index) => {
    const piece = { key: `${index}`, from, length };
    from += length;
    return piece;
  });
}
