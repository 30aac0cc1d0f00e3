import { useEffect, useState } from 'react';

const OF_CATALOGUE = /^calculation (\S+) of the catalogue$/;

/** A calculation with its formula and the standing of what it rests on, e.g. "Oil clearance: c = … ; Handbook, p. 4 (read)". */
async function looked(line: string): Promise<readonly string[]> {
  const id = OF_CATALOGUE.exec(line)?.[1];
  if (id === undefined) return [line];
  const [{ findCalculation }, { describeSource, sourceOf }] = await Promise.all([
    import('@gudgeon/core/calc'),
    import('@gudgeon/core/sources'),
  ]);
  const found = findCalculation(id);
  if (found === undefined) return [line];
  return [`${found.title}: ${found.formula}`, ...found.sources.map((key) => describeSource(sourceOf(key)))];
}

/** Sources as lines. The catalogue is large, so it is fetched when a number is opened; until then its entry stands by name. */
export function useSourceLines(sources: readonly string[]): readonly string[] {
  const [lines, setLines] = useState(sources);
  useEffect(() => {
    let wanted = true;
    Promise.all(sources.map(looked)).then(
      (found) => wanted && setLines([...new Set(found.flat())]),
      // Without the server the names of the entries stay: they are true, only shorter.
      () => wanted && setLines(sources),
    );
    return () => {
      wanted = false;
    };
  }, [sources]);
  return lines;
}
