/** One action of a screen: its button, its key, and what is said aloud all read this object. */
export interface Action {
  readonly name: string;
  readonly label: string;
  /** `KeyboardEvent.key` values; a foot pedal sends Enter or Space. */
  readonly keys: readonly string[];
  readonly available: boolean;
  readonly run: () => void;
  /** Said aloud after the action, when speech is on. */
  readonly spoken?: string;
}

/** Keys in the words that stand on a button. */
export function keyWords(action: Action): string {
  const names: Record<string, string> = {
    Enter: 'Enter',
    ' ': 'Space',
    Escape: 'Esc',
    ArrowRight: '→',
    ArrowLeft: '←',
    ArrowUp: '↑',
    ArrowDown: '↓',
    PageDown: 'Page Down',
  };
  return action.keys.map((key) => names[key] ?? key.toUpperCase()).join(' or ');
}
