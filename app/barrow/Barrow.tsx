/** The strip from which new things are brought onto the plan. */
export function Barrow() {
  return null;
}
