import { LIMITS, type LimitId, limitsOf } from "../garden/limits.ts";
import { plainText } from "../garden/plain-text.ts";
import { formatMoney, formatRatio, formatVolume } from "../units/format-figure.ts";
import { formatDistance, formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { midSentence } from "../words/phrases.ts";
import { say, sayCount } from "../words/say.ts";
import { text } from "./flow.ts";
import { LEAST_PT, lineHeight, shortened, wrapped } from "./lettering.ts";
import type { Paper } from "./papers.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

const TITLE_PT = 18;
const HEADER = 11;
const FOOTER_GAP = 2.4;

/** Limits that shape every garden; others are named on the sheet where the gardener has changed them. */
const ALWAYS_NAMED: readonly LimitId[] = [
  "reach",
  "kneelingWay",
  "barrowWay",
  "kitchenWalk",
  "hose",
  "hardDepth",
];

/** How much of the page its head and foot take, mm. */
export function frameSize(
  facts: SheetFacts,
  width: number,
): { readonly header: number; readonly footer: number } {
  return { header: HEADER, footer: footerLines(facts, width, "").length * lineHeight(LEAST_PT) + FOOTER_GAP };
}

/** Title, day and sums above; the limits held to and the scale below. */
export function frameMarks(facts: SheetFacts, paper: Paper, scaleText: string, date: string | null): Mark[] {
  const { garden, beds, takeoff, units, snags, stage, stages } = facts;
  const [left, right] = [paper.margin, paper.width - paper.margin];
  const soil = takeoff.beds.reduce((sum, { soilVolumeL }) => sum + soilVolumeL, 0);
  const toFix = snags.filter(({ grade }) => grade === "must").length;
  const sums = [
    ...(stage === "all" ? [] : [say`stage ${stage} of ${stages.at(-1) ?? stage}`]),
    ...(toFix > 0 ? [say`${toFix} still to fix`] : []),
    sayCount(beds.length, { one: "{{count}} bed", other: "{{count}} beds" }),
    say`${formatVolume(soil, units)} of soil`,
    formatMoney(takeoff.total, takeoff.currency),
    ...(date ? [date] : []),
    say`sheet 1 of 1`,
  ].join(" · ");
  const rule = (y: number): Mark => ({
    draw: "line",
    points: [
      [left, y],
      [right, y],
    ],
    closed: false,
    pen: 0.4,
  });

  const foot = footerLines(facts, right - left, scaleText);
  const footTop = paper.height - paper.margin - foot.length * lineHeight(LEAST_PT);
  return [
    text(
      shortened(plainText(garden.name) || say`Build sheet`, (right - left) * 0.5, TITLE_PT, "bold"),
      left,
      paper.margin + 6,
      {
        pt: TITLE_PT,
        weight: "bold",
      },
    ),
    text(sums, right, paper.margin + 6, { pt: 9, anchor: "end" }),
    rule(paper.margin + 8.4),
    rule(footTop - FOOTER_GAP + 1.4),
    ...foot.map((line, i) => text(line, left, footTop + (i + 0.85) * lineHeight(LEAST_PT))),
  ];
}

function footerLines({ garden, units }: SheetFacts, width: number, scaleText: string): string[] {
  const held = limitsOf(garden);
  const own = (Object.keys(garden.limits) as LimitId[]).filter(
    (id) => id in LIMITS && !ALWAYS_NAMED.includes(id),
  );
  const named = [...ALWAYS_NAMED, ...own].map((id) => {
    const words = `${midSentence(LIMITS[id].label)} ${limitWords(id, held[id], units)}`;
    return garden.limits[id] === undefined ? words : say`${words} (yours)`;
  });
  const scale = scaleText ? say`Drawn at ${scaleText}.` : say`Drawn at 3/16 in = 1 ft.`;
  return wrapped(
    say`Limits: ${named.join(", ")}. ${scale} Guidance for planning; local codes decide.`,
    width,
    LEAST_PT,
  );
}

/** Longer limits are walks and hoses, said in whole feet or metres. */
const FAR = 3000;

function limitWords(id: LimitId, value: number, units: Units): string {
  const { unit } = LIMITS[id];
  switch (unit) {
    case "mm":
      return value > FAR ? formatDistance(value, units) : formatShort(value, units);
    case "ratio":
      return value < 1 ? formatRatio(value) : String(value);
    case "h":
      return `${value} h`;
    default: {
      const never: never = unit;
      throw new RangeError(`unknown unit ${String(never)}`);
    }
  }
}
