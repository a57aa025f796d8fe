/** Where a number or a rule comes from, shown wherever it is used. */
export interface Source {
  /**
   * How far to trust it: read in a published text, recalled from one without looking it up again, common
   * practice with no single source, or arithmetic on stated inputs.
   */
  readonly how: "published" | "memory" | "practice" | "computed";
  /** The text and its section, or for practice a short sentence on who does so. */
  readonly text: string;
}

export const published = (text: string): Source => ({ how: "published", text });
export const fromMemory = (text: string): Source => ({ how: "memory", text });
export const practice = (text: string): Source => ({ how: "practice", text });
export const computed = (text: string): Source => ({ how: "computed", text });
