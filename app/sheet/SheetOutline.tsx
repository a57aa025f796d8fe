import type { Sheet } from "../../src/index.ts";

/** The sheet in words, for those who hear it instead of seeing it. */
export function SheetOutline({ sheet }: { readonly sheet: Pick<Sheet, "outline"> }) {
  return (
    <div className="sheet-words">
      {sheet.outline
        .filter(({ lines }) => lines.length > 0)
        .map(({ heading, lines }) => (
          <section key={heading}>
            <h2>{heading}</h2>
            <p>{lines.join("; ")}</p>
          </section>
        ))}
    </div>
  );
}
