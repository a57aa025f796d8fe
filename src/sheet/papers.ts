export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

/** ANSI Letter and ISO 216 A4, upright, mm. */
export const PAPERS = {
  letter: { name: "Letter", width: 215.9, height: 279.4, margin: 10 },
  a4: { name: "A4", width: 210, height: 297, margin: 10 },
} as const satisfies Record<string, Paper>;

export type PaperId = keyof typeof PAPERS;
