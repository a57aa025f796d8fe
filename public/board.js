// Before the first paint: the board that was chosen on this device, or a light page would flash up in the evening; and
// whether the page's first sentence is for whoever opens it.
try {
  const board = localStorage.getItem("bedwright-board");
  if (board === "light" || board === "dark") document.documentElement.dataset.board = board;
  const language = localStorage.getItem("bedwright-language") ?? navigator.language;
  const greeted = localStorage.getItem("bedwright-welcomed") !== null;
  if (greeted || !language.startsWith("en")) document.documentElement.dataset.greeted = "";
} catch {
  // Storage is denied: the board is the device's, and everybody is met as on a first visit.
}
