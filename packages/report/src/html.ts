import type { Document, Picture, Table } from './document.js';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (letter) => entities[letter] as string);

const style = `body{font:11pt/1.4 system-ui,sans-serif;margin:2rem;color:#000;background:#fff;font-variant-numeric:tabular-nums}
table{border-collapse:collapse;width:100%;margin:0 0 1rem}caption{font-weight:700;text-align:left;padding:.5rem 0}
th,td{border:1px solid #000;padding:.2rem .4rem;text-align:left;vertical-align:top}thead{display:table-header-group}
tr{break-inside:avoid}@page{margin:15mm 12mm}@media print{body{margin:0}}tr.struck td{text-decoration:line-through}.open{border-left:4px solid #000;padding-left:.6rem}
figure{margin:0 0 1rem;break-inside:avoid}figure img{display:block;max-width:100%;max-height:160mm;width:auto;height:auto}`;

function tableHtml(table: Table): string {
  const head = table.columns.map((name) => `<th scope="col">${escaped(name)}</th>`).join('');
  const body = table.rows
    .map(
      (line) =>
        `<tr${line.struck ? ' class="struck"' : ''}>${line.cells.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`,
    )
    .join('\n');
  const open = table.open.map((text) => `<p class="open">Open: ${escaped(text)}</p>`).join('\n');
  return `<table><caption>${escaped(table.title)}</caption><thead><tr>${head}</tr></thead><tbody>\n${body}\n</tbody></table>\n${open}`;
}

function pictureHtml({ title, words, who, source, why }: Picture): string {
  const image =
    source === undefined
      ? `<p class="open">Picture left out: ${escaped(why ?? 'it was not at hand')}</p>`
      : `<img src="${escaped(source)}" alt="${escaped(words || title)}">`;
  const caption = [title, words, who].filter((text) => text !== '').map(escaped);
  return `<figure>${image}<figcaption>${caption.join('. ')}</figcaption></figure>`;
}

const picturesHtml = (pictures: readonly Picture[]): string =>
  pictures.length === 0 ? '' : `<h2>Photos</h2>\n${pictures.map(pictureHtml).join('\n')}\n`;

/** The document as one HTML file that stands by itself: no script, no address outside, readable in any browser years later. */
export function documentHtml(document: Document): string {
  const lines = (texts: readonly string[]) => texts.map((text) => `<p>${escaped(text)}</p>`).join('\n');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${escaped(document.title)}</title><style>${style}</style></head>
<body><h1>${escaped(document.title)}</h1>
${lines(document.lead)}
${document.tables.map(tableHtml).join('\n')}
${picturesHtml(document.pictures ?? [])}${lines(document.notes)}
</body></html>
`;
}
