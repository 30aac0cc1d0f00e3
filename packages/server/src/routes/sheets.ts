import { loadSheet } from '@gudgeon/core/engine/load';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { CheckSheetReply, SheetReply, SheetsReply } from '../api/index.js';
import { refusal } from '../app/refusal.js';
import type { SheetLibrary } from '../sheets/library.js';

export function serveSheets(app: FastifyInstance, sheets: SheetLibrary): void {
  app.get('/api/sheets', async (): Promise<SheetsReply> => ({ sheets: sheets.list() }));

  app.get('/api/sheets/:id', async (request: FastifyRequest<{ Params: { id: string } }>): Promise<SheetReply> => {
    const { id } = request.params;
    const text = sheets.textOf(id);
    if (text === undefined) throw refusal(404, 'no-such-sheet', `There is no sheet named "${id.slice(0, 60)}".`);
    return { id, text };
  });

  app.post('/api/sheets/check', async (request): Promise<CheckSheetReply> => checked(sheetText(request.body)));
}

function sheetText(body: unknown): string {
  const text = typeof body === 'object' && body !== null && 'text' in body ? body.text : undefined;
  if (typeof text === 'string') return text;
  throw refusal(400, 'no-text', 'Send { "text": "…" } with the sheet as text.');
}

function checked(text: string): CheckSheetReply {
  const loaded = loadSheet(text);
  if (!loaded.ok) return { faults: loaded.fault, cautions: [] };
  return { engine: loaded.value, faults: [], cautions: loaded.value.cautions };
}
