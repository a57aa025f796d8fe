export function fontTables(path: string | URL): Map<string, Buffer>;
export function glyphOf(cmap: Buffer, code: number): number;
export function advanceOf(tables: Map<string, Buffer>, glyph: number): number;
export function outlineOf(tables: Map<string, Buffer>, glyph: number): Buffer;
export function partsOf(
  outline: Buffer,
): { readonly glyph: number; readonly x: number; readonly y: number }[];
