/** The plan's twin in the page: every thing in the garden, to be reached, read out and worked by keyboard. */
export function PlanList() {
  return null;
}
