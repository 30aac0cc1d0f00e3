import { type ChangeEvent, type Ref, useId } from 'react';

interface PhotoInputProps {
  readonly words: string;
  readonly second?: boolean;
  readonly ref?: Ref<HTMLInputElement>;
  readonly taken: (file: File) => void;
}

/** A big button that opens the camera, or the files of a device without one. The input lies over its label, so that keys and fingers find it. */
export function PhotoInput({ words, second = false, ref, taken }: PhotoInputProps) {
  const id = useId();
  const change = ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    // The same file may be chosen again.
    target.value = '';
    if (file) taken(file);
  };
  return (
    <div className={second ? 'photo-input photo-input-second' : 'photo-input'}>
      <label htmlFor={id}>{words}</label>
      <input
        id={id}
        ref={ref}
        type="file"
        accept="image/*"
        capture="environment"
        data-bench-control={words}
        onChange={change}
      />
    </div>
  );
}
