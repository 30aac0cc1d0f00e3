/** Places of these screens, and of the ones that they lead to. */
export const startPlace = (job: string, part?: string): string =>
  `/engine/${job}/start${part === undefined ? '' : `/${part}`}`;
export const runInPlace = (job: string): string => `/engine/${job}/run-in`;
