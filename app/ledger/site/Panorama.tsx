import { useMemo } from "react";
import { formatClock, type Site, say, told, word } from "../../../src/index.ts";
import { sunSpans } from "../../moment/sun-then.ts";
import { dayOfYear, dayWords, shortDay } from "../../moment/year-days.ts";
import { along, horizonLine, panoramaOf, pieces, sunTrack } from "./panorama-shape.ts";

const WIDTH = 360;
const HEIGHT = 132;
/** Where the level horizon lies, from the top; the winds are lettered below it. */
const LEVEL = 114;
const DAYS = [dayOfYear(6, 21), dayOfYear(3, 20), dayOfYear(12, 21)];
const WINDS = [
  { azimuth: 0, letter: word("N") },
  { azimuth: 90, letter: word("E") },
  { azimuth: 180, letter: word("S") },
  { azimuth: 270, letter: word("W") },
];
const HEIGHTS = [30, 60];

/** The skyline as it is seen from the yard, with the sun's way on the longest, a middle and the shortest day. */
export function Panorama({ site }: { readonly site: Site }) {
  const drawn = useMemo(() => {
    const tracks = DAYS.map((day) => ({ day, track: sunTrack(site, day) }));
    const view = panoramaOf(
      site.skyline,
      site.latitude,
      tracks.map(({ track }) => track),
    );
    const up = (altitude: number) => LEVEL * (1 - altitude / view.top);
    const lineOf = (points: readonly (readonly [number, number])[]) =>
      points.map(([x, altitude]) => `${x.toFixed(2)} ${up(altitude).toFixed(2)}`).join("L");
    return {
      view,
      up,
      ways: tracks.flatMap(({ day, track }) =>
        pieces(view, track).map((piece, i) => ({
          key: `${day} ${i}`,
          day,
          line: `M${lineOf(piece.map(({ azimuth, altitude }) => [along(view, azimuth), altitude]))}`,
          top: piece.reduce((best, sun) => (sun.altitude > best.altitude ? sun : best)),
        })),
      ),
      horizon: `M0 ${LEVEL}L${lineOf(horizonLine(view, site.skyline))}L${WIDTH} ${LEVEL}Z`,
    };
  }, [site]);
  const { view, up, ways, horizon } = drawn;
  return (
    <figure className="panorama">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
        <defs>
          <pattern id="skyline-hatch" width="7" height="7" patternUnits="userSpaceOnUse">
            <path d="M-1 1L1-1M0 7L7 0M6 8L8 6" stroke="var(--faint)" strokeWidth="0.8" />
          </pattern>
        </defs>
        {HEIGHTS.filter((height) => height < view.top).map((height) => (
          <g key={height} className="panorama-height">
            <path d={`M0 ${up(height)}H${WIDTH}`} />
            <text x="2" y={up(height) - 2}>
              {height}°
            </text>
          </g>
        ))}
        {ways.map(({ key, line }) => (
          <path key={key} className="panorama-way" d={line} />
        ))}
        <path d={horizon} fill="var(--shade)" />
        <path className="panorama-skyline" d={horizon} fill="url(#skyline-hatch)" />
        {ways.map(({ key, day, top }) => (
          <text key={key} className="panorama-day" x={along(view, top.azimuth)} y={up(top.altitude) - 3}>
            {shortDay(day)}
          </text>
        ))}
        {WINDS.map(({ azimuth, letter }) => (
          <text key={letter} className="panorama-wind" x={Math.max(5, along(view, azimuth))} y={HEIGHT - 4}>
            {told(letter)}
          </text>
        ))}
      </svg>
      <figcaption>{clearWords(site)}</figcaption>
    </figure>
  );
}

/** When the sun stands clear of the skyline: "21 June: 6:20 to 19:50. …" */
const clearWords = (site: Site): string =>
  say`The sun stands over it: ${DAYS.map((day) => `${dayWords(day)} ${clearTimes(site, day)}`).join("; ")}.`;

function clearTimes(site: Site, day: string): string {
  const clear = sunSpans(site, day).filter(({ shines }) => shines === "yes");
  if (clear.length === 0) return say`never`;
  const spans = clear.map(
    ({ from, to }) => say`${formatClock(from)} to ${to === 1440 ? "24:00" : formatClock(to)}`,
  );
  return spans.reduce((before, next) => say`${before} and ${next}`);
}
