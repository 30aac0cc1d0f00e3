/** Readings of worn parts are asked about by the number gate: the invented person looked twice and said yes. */
import type { Engine } from '@gudgeon/core/engine';
import type { EntryData } from '@gudgeon/core/record';
import { type Bench, gateQuestion, judgeKeyed, openBench } from '@gudgeon/core/workbench';
import type { Said, Sealer } from './sealer.js';

/** Seals a story; what is said of worn parts carries the gate's question where it asked one. */
export function sayAnswered(engine: Engine, sealer: Sealer, story: readonly Said[]): void {
  let bench: Bench | undefined;
  for (const said of story) {
    if (said.worn !== true) {
      sealer.say([said]);
      continue;
    }
    bench = openBench(engine, [...sealer.entries], bench);
    sealer.say([answered(bench, said)]);
  }
}

function answered(bench: Bench, said: Said): Said {
  const data = said.data as EntryData['measured'];
  const { slot, reading, instrument = '' } = data;
  const question = gateQuestion(reading.text, judgeKeyed(bench, slot, reading.text, { instrument }));
  return question === undefined ? said : { ...said, data: { ...data, answered: [question] } };
}
