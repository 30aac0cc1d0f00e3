import type { JobState } from './job-state.js';

/** What to tell the person about copies: "saved" only when the server has confirmed every entry and photo. */
export function copyWords(state: Pick<JobState, 'waiting' | 'trouble'>, now: number, photos = 0): string {
  const waiting = state.waiting.length;
  const pictures = `${photos} ${photos === 1 ? 'photo' : 'photos'}`;
  if (waiting === 0) return photos > 0 ? `${pictures} on this device only` : (state.trouble ?? 'All entries saved');
  const oldest = Math.min(...state.waiting.map((e) => Date.parse(e.at)));
  const minutes = Math.max(0, Math.floor((now - oldest) / 60_000));
  const age =
    minutes < 1
      ? ''
      : minutes < 120
        ? `, the oldest for ${minutes} min`
        : `, the oldest for ${Math.floor(minutes / 60)} h`;
  const entries = `${waiting} ${waiting === 1 ? 'entry' : 'entries'}`;
  return `${entries}${photos > 0 ? ` and ${pictures}` : ''} on this device only${age}`;
}
