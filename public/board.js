// The board that was chosen on this device, before the first paint: a light page must not flash up in the evening.
try {
  const board = localStorage.getItem("bedwright-board");
  if (board === "light" || board === "dark") document.documentElement.dataset.board = board;
} catch {
  // Storage is denied: the board is the device's.
}
