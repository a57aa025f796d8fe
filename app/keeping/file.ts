/** Hands text or bytes to the browser as a file to be saved. */
export function offerFile(name: string, content: string | Blob, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken its own hold of the file once the click is over.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
