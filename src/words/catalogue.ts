/** The words of a language, by the English text they stand for. Of a text that counts each form has its own entry. */
export type Catalogue = Readonly<Record<string, string>>;
