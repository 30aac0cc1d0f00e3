import { type Engine, type Joint, jointById } from '@gudgeon/core/engine';
import { tighteningActs } from '@gudgeon/core/plan';
import type { Command } from 'commander';
import { engineOf } from '../engine-of-sheet.js';
import { BadInput, type Io } from '../io.js';
import { actsAsJson, actsAsText } from './tighten-words.js';

function jointNamed(engine: Engine, id: string): Joint {
  const joint = jointById(engine, id);
  if (joint !== undefined) return joint;
  const valid = engine.joints.map((one) => one.id).join(', ');
  const help = valid === '' ? 'the sheet describes no joint' : `joints of this sheet: ${valid}`;
  throw new BadInput([`tighten: there is no joint ${JSON.stringify(id)}; ${help}`]);
}

/** `gudgeon tighten`: every act of a joint, fastener by fastener, in the order of the wrench. */
export function tighten(program: Command, io: Io): void {
  program
    .command('tighten')
    .description('list every act of tightening a joint, in order')
    .argument('<sheet>', 'engine sheet; "-" reads standard input')
    .argument('<joint>', 'id of the joint')
    .option('--json', 'print one JSON object')
    .action(async (sheet: string, id: string, flags: { json?: boolean }) => {
      const joint = jointNamed(await engineOf(sheet, io), id);
      const acts = tighteningActs(joint);
      io.out(flags.json ? JSON.stringify(actsAsJson(joint.id, acts), null, 2) : actsAsText(joint.name, acts));
    });
}
