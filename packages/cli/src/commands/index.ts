import type { Command } from 'commander';
import type { Io } from '../io.js';
import { register as calc } from './calc.js';
import { fit } from './fit.js';
import { assess, inspect, worksheet } from './measure.js';
import { sheet } from './sheet.js';
import { tighten } from './tighten.js';
import { valves } from './valves.js';

/** A command adds itself to the program; it writes and reads through `io` only and throws `BadInput` to refuse. */
export type Register = (program: Command, io: Io) => void;

/** One file a command, one line here. */
export const commands: readonly Register[] = [calc, valves, tighten, sheet, inspect, worksheet, assess, fit];
