import type { Garden, Item } from "../../src/index.ts";
import { fullGarden } from "./full-garden.ts";

/** What somebody might call a bed to harm whoever opens the garden: the list every way out of the planner is tried with. */
export const HOSTILE_NAMES = [
  "<script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "'-alert(1)-'",
  "</text></svg><script>alert(1)</script>",
  "]]><!-- &lol; &#0; &amp;",
  "javascript:alert(1)",
  "=cmd|' /C calc'!A0",
  "+1+1",
  "@SUM(1,1)",
  "-2",
  "\t=1+1",
  "\r=1+1",
  "\n0\nEOF\n",
  "＝1+1",
  'a,"b";c',
  "Salads \u202Egpj.exe\u202C",
  "\u2066\u2069\u202D",
  "\u0000\u0007\u001B[31m\u007F\u0085",
  "half a letter \uD83C",
  "\u{1F331}".repeat(40),
  "\u{1D49C}".repeat(40),
  "%%u%%d%%0",
  "\\U+0041 \\P ^J",
  "../../../etc/passwd",
  "CON",
  "x".repeat(80),
  "\uFFFE\uFFFF\u2028\u2029",
  "  ",
] as const;

/** Of one of everything, in both spots a name can be: each thing's own and the garden's. */
export function hostileGarden(units: "us" | "metric", shift = 0): Garden {
  const garden = fullGarden(units);
  const name = (i: number) => HOSTILE_NAMES[(i + shift) % HOSTILE_NAMES.length]!;
  return {
    ...garden,
    name: name(0),
    site: { ...garden.site, place: name(1) },
    prices: { ...garden.prices, supplier: name(6), asOf: "2026-04-01" },
    items: garden.items.map((item, i): Item => ({ ...item, name: name(i) })),
  };
}
