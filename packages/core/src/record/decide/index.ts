export { decide } from './decide.js';
export type { Decision } from './lookup.js';
export type { Command, NewEntry, Refusal } from './refusal.js';
