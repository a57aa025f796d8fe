/** Gives the keyboard to the first field of the card; to the card itself while its fields are on their way. */
export function focusFirstField(card: HTMLElement): void {
  const field = card.querySelector<HTMLElement>(["input", "select", "textarea"].join());
  (field ?? card).focus();
}
