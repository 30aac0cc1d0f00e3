/** A name that every file system takes: "Quernside 51, order" becomes "quernside-51-order". */
const fileName = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

const TYPES = { html: 'text/html', csv: 'text/csv;charset=utf-8', svg: 'image/svg+xml' } as const;

/** Hands a text to the person as a file of this browser's download folder. */
export function saveFile(words: string, ending: keyof typeof TYPES, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: TYPES[ending] }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${fileName(words)}.${ending}`;
  link.click();
  // The browser reads the file after the click has returned.
  window.setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
