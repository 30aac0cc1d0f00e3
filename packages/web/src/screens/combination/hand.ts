import type { ShownIn } from '@gudgeon/core/workbench';

/** How a row changes the scratch copy. */
export interface Hand {
  readonly shownIn: ShownIn;
  readonly slide: (key: string, number: number) => void;
  readonly put: (key: string, value: number) => void;
  readonly takeBack: (key: string) => void;
}
