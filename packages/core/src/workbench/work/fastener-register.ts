/** Which fastener belongs in which hole: as the sheet lists it and as it was placed, and the bolt cards of the tear-down. */
import { fastenerMap, type MapRow } from '../../plan/index.js';
import { givenBy } from '../bench.js';
import { kindText, lengthText, opensWords } from '../fastener-words.js';
import type { RegistersView } from '../work-views.js';
import { actWords } from './act-words.js';
import { type Ground, givenOf } from './work-ground.js';

type Row = RegistersView['fasteners'][number];

/** Acts of the tear-down that lay bolts out by hole. */
export const BOLT_CARDS: readonly string[] = ['outside-bolts', 'bolts-by-hole'];

export function fastenerRows(ground: Ground): readonly Row[] {
  const { engine, facts } = ground.bench;
  return [
    ...cardRows(ground),
    ...engine.joints.flatMap((joint) =>
      fastenerMap(joint, facts).rows.map((row) => ({
        joint: joint.id,
        jointName: joint.name,
        ...holeRow(ground, row),
      })),
    ),
  ];
}

function holeRow({ bench }: Ground, { hole, expected, fastener }: MapRow): Omit<Row, 'joint' | 'jointName'> {
  const given = givenBy(bench, fastener.entry);
  const { placed } = fastener;
  return {
    hole: hole.id,
    fastener: placed?.fastener ?? (expected === undefined ? 'not stated' : kindText(expected)),
    length: placed?.length?.text ?? lengthText(expected),
    opensInto: opensWords[hole.opensInto],
    ...(given && { given }),
  };
}

/** What a bolt card says is words of the person who laid it out. */
function cardRows({ standing }: Ground): readonly Row[] {
  return BOLT_CARDS.flatMap((id) => {
    const stand = standing.stands.get(id);
    const done = stand?.held.done;
    if (stand === undefined || done === undefined) return [];
    const { answer } = done.data;
    const fastener = 'words' in answer ? (answer.words ?? '') : '';
    return [
      {
        joint: id,
        jointName: actWords(stand.act),
        hole: '',
        fastener,
        length: '',
        opensInto: '',
        given: givenOf(done),
      },
    ];
  });
}
