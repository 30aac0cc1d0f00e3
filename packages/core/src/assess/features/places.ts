import { valveKey, valveName } from '../../engine/index.js';
import type { Place, Station } from '../model.js';
import type { Anatomy } from './anatomy.js';

type StationsOf = (anatomy: Anatomy) => readonly Station[];
type PlacesOf = (anatomy: Anatomy) => readonly Place[];
const fixed = (stations: readonly Station[] | StationsOf): StationsOf =>
  typeof stations === 'function' ? stations : () => stations;

/** A single place of the whole engine. */
export const once =
  (id: string, name: string, stations: readonly Station[] | StationsOf): PlacesOf =>
  (anatomy) => [{ id, name, stations: fixed(stations)(anatomy) }];

/** Cylinders as one walks round the block. */
export const perCylinder =
  (stations: readonly Station[] | StationsOf): PlacesOf =>
  (anatomy) =>
    anatomy.cylinders.map(({ number, bank }) => ({
      id: `${number}`,
      name: `cylinder ${number}`,
      cylinder: number,
      bank,
      stations: fixed(stations)(anatomy),
    }));

/** Parts of a cylinder that lie on the bench in the order of their numbers. */
export const perPart =
  (stations: readonly Station[] | StationsOf): PlacesOf =>
  (anatomy) =>
    [...perCylinder(stations)(anatomy)].sort((a, b) => (a.cylinder ?? 0) - (b.cylinder ?? 0));

export const perMain =
  (stations: readonly Station[]): PlacesOf =>
  ({ mains }) =>
    Array.from({ length: mains }, (_, index) => ({
      id: `main-${index + 1}`,
      name: `main ${index + 1}`,
      journal: index + 1,
      stations,
    }));

export const perCrankpin =
  (stations: readonly Station[]): PlacesOf =>
  ({ crankpins }) =>
    crankpins.map(({ number, cylinders }) => ({
      id: `crankpin-${number}`,
      name: pinName(number, cylinders),
      journal: number,
      ...(cylinders.length === 1 && cylinders[0] !== undefined ? { cylinder: cylinders[0] } : {}),
      stations,
    }));

function pinName(number: number, cylinders: readonly number[]): string {
  if (cylinders.length < 2) return `crankpin ${number}`;
  return `crankpin ${number}, cylinders ${cylinders.join(' and ')}`;
}

export const perCamJournal =
  (stations: readonly Station[]): PlacesOf =>
  ({ camshafts }) =>
    camshafts.flatMap((cam) =>
      Array.from({ length: cam.journals }, (_, index) => ({
        id: `${cam.id}-${index + 1}`,
        name: `${cam.name} journal ${index + 1}`,
        journal: index + 1,
        grade: cam.id,
        stations,
      })),
    );

export const perCamshaft =
  (stationsOf: (journals: number) => readonly Station[]): PlacesOf =>
  ({ camshafts }) =>
    camshafts.map((cam) => ({ id: cam.id, name: cam.name, grade: cam.id, stations: stationsOf(cam.journals) }));

export const perValve =
  (stations: readonly Station[] | ((kind: 'intake' | 'exhaust') => readonly Station[])): PlacesOf =>
  ({ engine, valves, cylinders }) =>
    valves.map((valve) => {
      const bank = cylinders.find((each) => each.number === valve.cylinder)?.bank;
      return {
        id: valveKey(valve),
        name: valveName(engine, valve),
        cylinder: valve.cylinder,
        ...(bank === undefined ? {} : { bank }),
        valve,
        stations: typeof stations === 'function' ? stations(valve.kind) : stations,
      };
    });

/** Faces of the block, one for each bank. */
export const perDeck =
  (stations: readonly Station[] | StationsOf): PlacesOf =>
  (anatomy) =>
    anatomy.banks.map((bank) => ({
      id: bank,
      name: anatomy.banks.length === 1 ? 'deck' : `${bank} deck`,
      bank,
      stations: fixed(stations)(anatomy),
    }));

/** Heads drawn in the sheet, else one for each bank. */
export const perHead =
  (stations: readonly Station[], what = 'head'): PlacesOf =>
  ({ engine, banks }) => {
    const heads =
      engine.heads.length > 0
        ? engine.heads.map((head) => ({ id: head.id, name: head.name, bank: head.bank }))
        : banks.map((bank) => ({ id: bank, name: banks.length === 1 ? 'head' : `${bank} head`, bank }));
    return heads.map((head) => ({ ...head, name: what === 'head' ? head.name : `${what} of ${head.name}`, stations }));
  };
