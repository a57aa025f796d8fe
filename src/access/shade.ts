const ROUND = 2 * Math.PI;
/** A line that only grazes the end of a shadow is not in it, radians. */
const GRAZING = 1e-9;

/** The directions about a place in which something is met: arcs from 0 to a full round that do not overlap. */
export class Shade {
  readonly #starts: number[] = [];
  readonly #ends: number[] = [];

  /** @param from, to radians; `to` is not less than `from`, and an arc may run past the full round */
  add(from: number, to: number): void {
    if (to - from >= ROUND) {
      this.#addArc(0, ROUND);
      return;
    }
    const start = withinRound(from + GRAZING);
    const end = start + (to - from) - 2 * GRAZING;
    if (end <= start) return;
    this.#addArc(start, Math.min(end, ROUND));
    if (end > ROUND) this.#addArc(0, end - ROUND);
  }

  /** Whether all of an arc, shorter than a full round, is in the shade. */
  covers(from: number, to: number): boolean {
    const start = withinRound(from);
    const end = start + to - from;
    return this.#coversArc(start, Math.min(end, ROUND)) && (end <= ROUND || this.#coversArc(0, end - ROUND));
  }

  #coversArc(start: number, end: number): boolean {
    for (let i = 0; i < this.#starts.length; i++) {
      if (this.#starts[i]! <= start && end <= this.#ends[i]!) return true;
    }
    return false;
  }

  #addArc(from: number, to: number): void {
    let [start, end] = [from, to];
    let kept = 0;
    for (let i = 0; i < this.#starts.length; i++) {
      const [knownStart, knownEnd] = [this.#starts[i]!, this.#ends[i]!];
      if (knownEnd < start || knownStart > end) {
        this.#starts[kept] = knownStart;
        this.#ends[kept++] = knownEnd;
      } else {
        start = Math.min(start, knownStart);
        end = Math.max(end, knownEnd);
      }
    }
    this.#starts[kept] = start;
    this.#ends[kept] = end;
    this.#starts.length = kept + 1;
    this.#ends.length = kept + 1;
  }
}

const withinRound = (direction: number): number => direction - ROUND * Math.floor(direction / ROUND);
