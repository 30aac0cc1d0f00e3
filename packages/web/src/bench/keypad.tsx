import { memo } from 'react';

interface KeypadProps {
  readonly press: (key: string) => void;
  readonly sign: boolean;
}
const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];

/** Own number pad: keys of at least 15 mm, three columns, acting on release. Not drawn anew with each digit. */
export const Keypad = memo(function Keypad({ press, sign }: KeypadProps) {
  return (
    <fieldset className="plain keypad">
      <legend className="only-read">Number keys</legend>
      {digits.map((key) => (
        <Key key={key} shown={key} name={key} press={() => press(key)} />
      ))}
      <Key shown="." name="decimal point" press={() => press('.')} />
      <Key shown="0" name="0" press={() => press('0')} />
      <Key shown="⌫" name="take back one digit" press={() => press('Backspace')} />
      {sign && <Key shown="−" name="minus" press={() => press('-')} />}
    </fieldset>
  );
});

function Key({ shown, name, press }: { readonly shown: string; readonly name: string; readonly press: () => void }) {
  return (
    <button
      type="button"
      className="key"
      data-key={name}
      aria-label={name === shown ? undefined : name}
      // Keeps the focus in the armed field, so that the next gauge reading lands there.
      onMouseDown={(event) => event.preventDefault()}
      onClick={press}
    >
      {shown}
    </button>
  );
}
