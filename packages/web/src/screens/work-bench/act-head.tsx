import type { WorkActView, WorkOfferView } from '@gudgeon/core/workbench';

interface ActHeadProps {
  readonly act: WorkActView;
  readonly offer?: WorkOfferView;
}

/** What is asked for, by kind of answer; a photo says so itself. */
const asks: Readonly<Record<WorkActView['answer'], string>> = {
  value: 'Read:',
  'felt-or-seen': 'Say:',
  photo: '',
  worksheet: 'Recorded there:',
  'joint-walk': 'Recorded there:',
  register: 'Tell:',
  list: 'Write down:',
  'sign-off': 'Sign:',
};

/** One act, to be read from arm's length, and what has to be known before it is answered. */
export function ActHead({ act, offer }: ActHeadProps) {
  return (
    <section className="work-act" aria-live="polite" data-act={act.id}>
      {act.place !== '' && <p className="work-place">{act.place}</p>}
      <h2 className="work-does">{act.does}</h2>
      {asks[act.answer] !== '' && (
        <p className="work-ask">
          {asks[act.answer]} {act.ask}
        </p>
      )}
      {beforehand(act, offer).map(([word, text]) => (
        <p key={word} className="work-word">
          <strong>{word}</strong> {text}
        </p>
      ))}
    </section>
  );
}

/** Words before the answer: who is needed, what cannot be undone, and where not to stop. */
function beforehand(act: WorkActView, offer?: WorkOfferView): readonly (readonly [string, string])[] {
  const { given, again, two, noReturn, closes, critical, unsure, added, awaits } = act;
  const told: readonly (readonly [string, string | undefined])[] = [
    [
      'NOT GOOD YET',
      given?.result === 'bad'
        ? `${given.words} (${given.by}, ${given.at}). Put it right, then say it anew.`
        : undefined,
    ],
    ['OPEN AGAIN', again && `${again.title}: ${again.why}`],
    ['NO WAY BACK', noReturn],
    ['TWO PEOPLE', two],
    ['DO NOT STOP AFTER IT', offer && !offer.safeAfter ? offer.pause : undefined],
    ['IT CLOSES', closes ? 'Count tools and aids, and look behind it once more.' : undefined],
    ['SECOND LOOK', critical ? 'Somebody looks again afterwards.' : undefined],
    [
      'CAME BACK',
      awaits && (awaits === 'shop' ? 'Say it once the shop has given it back.' : 'Say it once the parts have come.'),
    ],
    ['NOT SURE', unsure],
    ['OWN ACT', added?.why],
  ];
  return told.flatMap(([word, text]) => (text === undefined || text === '' ? [] : [[word, text] as const]));
}
