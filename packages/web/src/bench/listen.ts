/** Speech input, where the browser offers it: never the only way, and nothing is recorded from it without a key. */
interface Recogniser {
  lang: string;
  interimResults: boolean;
  maxAlternatives: number;
  onresult: ((event: { readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>> }) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start: () => void;
  abort: () => void;
}
type Maker = new () => Recogniser;

function maker(): Maker | undefined {
  const { SpeechRecognition, webkitSpeechRecognition } = window as unknown as Readonly<
    Partial<Record<'SpeechRecognition' | 'webkitSpeechRecognition', Maker>>
  >;
  return SpeechRecognition ?? webkitSpeechRecognition;
}

/** False on plain http and where the browser has no ears. */
export const listeningPossible = (): boolean => window.isSecureContext && maker() !== undefined;

const whyNot: Readonly<Record<string, string>> = {
  'not-allowed': 'This browser may not use the microphone. Key it instead.',
  'no-speech': 'Nothing was heard. Say it again, or key it.',
  'audio-capture': 'There is no microphone here. Key it instead.',
  network: 'This browser sends speech to a service that cannot be reached now. Key it instead.',
};

export interface Listening {
  readonly heard: (words: string) => void;
  readonly failed: (why: string) => void;
  /** However it went. */
  readonly ended: () => void;
}
/** Listens to one utterance; returns what breaks it off. */
export function listen({ heard, failed, ended }: Listening): () => void {
  const Made = maker();
  if (Made === undefined) {
    ended();
    return () => {};
  }
  const ears = new Made();
  ears.lang = 'en';
  ears.interimResults = false;
  ears.maxAlternatives = 1;
  ears.onresult = ({ results }) => heard(results[0]?.[0]?.transcript.trim() ?? '');
  ears.onerror = ({ error }) => failed(whyNot[error] ?? 'It could not be heard. Key it instead.');
  ears.onend = ended;
  ears.start();
  return () => ears.abort();
}
