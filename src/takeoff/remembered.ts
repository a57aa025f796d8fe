/**
 * Remembers the last few answers of a pure function by a key of its arguments. Moving a bed asks for the same cut
 * plans and the same loads again, sixty times a second.
 */
export function remembered<A extends readonly unknown[], R>(
  most: number,
  compute: (...args: A) => R,
  keyOf: (...args: A) => string,
): (...args: A) => R {
  const answers = new Map<string, R>();
  return (...args) => {
    const key = keyOf(...args);
    const known = answers.get(key);
    if (known !== undefined) {
      // The one asked for last is the last to be forgotten.
      answers.delete(key);
      answers.set(key, known);
      return known;
    }
    const answer = compute(...args);
    answers.set(key, answer);
    if (answers.size > most) {
      for (const oldest of answers.keys()) {
        answers.delete(oldest);
        break;
      }
    }
    return answer;
  };
}
