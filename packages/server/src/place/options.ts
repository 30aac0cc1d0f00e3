/** What the person asked for on the command line and in the environment. */
export const USUAL_PORT = 4730;

export type PortWish = { readonly ok: true; readonly port: number } | { readonly ok: false; readonly problem: string };

/** `--port N` or `--port=N`, else `PORT`, else the usual one. 0 means any free port. */
export function wishedPort(argv: readonly string[], env: Readonly<Record<string, string | undefined>>): PortWish {
  const place = argv.findIndex((word) => word === '--port' || word.startsWith('--port='));
  const word = argv[place];
  if (word === undefined) return env.PORT ? checked(env.PORT, 'PORT') : { ok: true, port: USUAL_PORT };
  const given = word.startsWith('--port=') ? word.slice('--port='.length) : argv[place + 1];
  return checked(given ?? '', '--port');
}

function checked(text: string, name: string): PortWish {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  if (port <= 65_535) return { ok: true, port };
  return { ok: false, problem: `${name} is "${text}"; it must be a number from 0 to 65535.` };
}
