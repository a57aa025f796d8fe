const KEY = "bedwright-last-open";

/** Which kept garden was last on the board; null if none was, or the browser tells nothing. */
export function lastOpen(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null; // storage denied: the last changed garden is opened instead
  }
}

export function rememberOpen(id: string | null): void {
  try {
    if (id === null) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, id);
  } catch {
    // Storage denied. Only which garden opens first is lost, and the keeper already says that nothing is kept.
  }
}
