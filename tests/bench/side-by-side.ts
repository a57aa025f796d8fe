/** Times of two ways to do the same, taken turn about so that a busy machine is as unkind to both. */
export interface SideBySide {
  readonly productMs: number;
  readonly referenceMs: number;
}

/**
 * Medians over `rounds` rounds after `warmUp` rounds that do not count. A round gives each side the same input and lets
 * it work `repeats` times; the time is that of one.
 */
export function sideBySide(
  product: (round: number) => unknown,
  reference: (round: number) => unknown,
  { rounds = 15, warmUp = 6, repeats = 1 } = {},
): SideBySide {
  const [ours, theirs]: [number[], number[]] = [[], []];
  for (let round = 0; round < warmUp + rounds; round++) {
    const [one, other] = round % 2 ? [theirs, ours] : [ours, theirs];
    one.push(timed(one === ours ? product : reference, round, repeats));
    other.push(timed(other === ours ? product : reference, round, repeats));
  }
  return { productMs: median(ours.slice(warmUp)), referenceMs: median(theirs.slice(warmUp)) };
}

function timed(work: (round: number) => unknown, round: number, repeats: number): number {
  const start = performance.now();
  for (let i = 0; i < repeats; i++) work(round);
  return (performance.now() - start) / repeats;
}

export const median = (times: readonly number[]): number => share(times, 0.5);
/** The time that so large a share of all stay within. */
export const share = (times: readonly number[], part: number): number =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * part))] ?? 0;
