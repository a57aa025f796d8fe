import { type Grade, type Snag, say, sayCount } from "../../src/index.ts";

export type Counts = Readonly<Record<Grade, number>>;

export function countSnags(snags: readonly Snag[]): Counts {
  const of = (grade: Grade) => snags.filter((snag) => snag.grade === grade).length;
  return { must: of("must"), should: of("should"), note: of("note") };
}

/** "3 to fix", "Nothing to fix" */
export const toFix = ({ must }: Counts): string => (must === 0 ? say`Nothing to fix` : say`${must} to fix`);

/** "1 should fix · 3 worth knowing"; what there is none of is left out. */
export function lesser({ must, should, note }: Counts): string {
  const parts = [
    should > 0 ? sayCount(should, { one: "{{count}} should fix", other: "{{count}} should fix" }) : "",
    note > 0 ? say`${note} worth knowing` : "",
  ].filter(Boolean);
  if (parts.length > 0) return parts.join(" · ");
  return must > 0 ? say`nothing else` : say`no snags left`;
}
