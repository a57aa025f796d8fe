export interface Paper {
  /** As it is asked for in a shop. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

/** ANSI/ASME Y14.1 Letter and Tabloid (size B), ISO 216 A4 and A3, upright, mm. */
export const PAPERS = {
  letter: { name: "Letter", width: 215.9, height: 279.4, margin: 10 },
  a4: { name: "A4", width: 210, height: 297, margin: 10 },
  tabloid: { name: "Tabloid", width: 279.4, height: 431.8, margin: 10 },
  a3: { name: "A3", width: 297, height: 420, margin: 10 },
} as const satisfies Record<string, Paper>;

export type PaperId = keyof typeof PAPERS;

export const PAPER_IDS: readonly PaperId[] = ["letter", "a4", "tabloid", "a3"];

/** The paper of the same family twice as large; null where there is none on the list. */
export const LARGER: Readonly<Record<PaperId, PaperId | null>> = {
  letter: "tabloid",
  a4: "a3",
  tabloid: null,
  a3: null,
};
