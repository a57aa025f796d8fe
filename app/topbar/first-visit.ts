const KEY = "bedwright-welcomed";

/** Whether this browser has seen the page before. A browser that keeps nothing is greeted each time. */
export function isFirstVisit(): boolean {
  try {
    return localStorage.getItem(KEY) === null;
  } catch {
    return true;
  }
}

export function rememberVisit(): void {
  try {
    localStorage.setItem(KEY, "yes");
  } catch {
    // Nothing depends on it.
  }
}
