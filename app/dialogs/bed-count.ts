import { sayCount } from "../../src/index.ts";

/** "1 bed", "2 beds". */
export const bedCount = (beds: number): string =>
  sayCount(beds, { one: "{{count}} bed", other: "{{count}} beds" });
