export { type CheckedSheet, checkSheet } from './check.js';
export { type FieldPath, fieldText, setField } from './fields.js';
