import { language } from "../../src/index.ts";

/** The day as the sheet says when it was printed. */
export const today = (): string =>
  new Intl.DateTimeFormat(language(), { dateStyle: "long" }).format(new Date());
