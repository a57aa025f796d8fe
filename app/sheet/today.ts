/** The day as the sheet says when it was printed. */
export const today = (): string =>
  new Intl.DateTimeFormat(undefined, { dateStyle: "long" }).format(new Date());
