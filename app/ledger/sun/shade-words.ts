import { formatHours, type ItemId, type Shade, say } from "../../../src/index.ts";

/** Less than this is lost in the rounding of what is shown, hours. */
export const TOLD = 0.05;
const MOST = 3;

/**
 * What takes the sun: "House takes 1.3 h, Pear tree 0.4 h".
 * @param nameOf null for what is no longer there
 */
export function shadeWords(shade: readonly Shade[], nameOf: (id: ItemId) => string | null): string {
  const takers = shade.flatMap(({ id, hours }) => {
    const name = nameOf(id);
    return name !== null && hours >= TOLD ? [{ name, hours }] : [];
  });
  const [first, ...others] = takers;
  // What two things shade at once, neither takes alone.
  if (!first) return shade.length > 0 ? say`Nothing takes much of its sun alone.` : say`Nothing shades it.`;
  const told = [
    say`${first.name} takes ${formatHours(first.hours)}`,
    ...others.slice(0, MOST - 1).map(({ name, hours }) => `${name} ${formatHours(hours)}`),
  ];
  return `${told.join(", ")}.`;
}
