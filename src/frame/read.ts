import type { FrameRecord } from '@frameworthy/shared/frame';
import { getDotPath, safeParse } from 'valibot';
import { migrate } from './migrate.ts';
import { FrameSchema, VERSION } from './schema.ts';

/** A record that passed the door, with what was done to it; or why it did not. */
export type Reading = { ok: true; record: FrameRecord; notices: string[] } | { ok: false; problems: string[] };

/** Far above any record: what is longer is not one. */
export const LARGEST = 1_000_000;
const MOST_PROBLEMS = 12;

/** Levels of a record's objects and lists, with plenty to spare for unknown fields. */
const DEEPEST = 32;

const deeperThan = (value: unknown, levels: number): boolean =>
  typeof value === 'object' &&
  value !== null &&
  (levels === 0 || Object.values(value).some((one) => deeperThan(one, levels - 1)));

/** Keys that would reach behind an object. */
const BEHIND = new Set(['__proto__', 'constructor', 'prototype']);

/** The value without keys that reach behind objects, and where those were. */
function cleaned(value: unknown, path: string, dropped: string[]): unknown {
  if (Array.isArray(value)) return value.map((one, i) => cleaned(one, `${path}${path && '.'}${i}`, dropped));
  if (typeof value !== 'object' || value === null) return value;
  const kept: [string, unknown][] = [];
  for (const [key, one] of Object.entries(value)) {
    const at = path ? `${path}.${key}` : key;
    if (BEHIND.has(key)) dropped.push(at);
    else kept.push([key, cleaned(one, at, dropped)]);
  }
  return Object.fromEntries(kept);
}

/** Checks a value that came from outside: a file, a link, what the browser kept. */
export function readValue(given: unknown): Reading {
  if (deeperThan(given, DEEPEST))
    return { ok: false, problems: ['This is nested deeper than any frame record, so it is none.'] };
  const dropped: string[] = [];
  const migrated = migrate(cleaned(given, '', dropped));
  if ('problem' in migrated) return { ok: false, problems: [migrated.problem] };
  const result = safeParse(FrameSchema, migrated.document);
  if (!result.success) {
    const problems = result.issues.map((issue) => {
      const path = getDotPath(issue) ?? 'record';
      const absent = issue.input === undefined ? 'This is missing.' : issue.message;
      return `${path}: ${absent.charAt(0).toLowerCase()}${absent.slice(1)}`;
    });
    const rest = problems.length - MOST_PROBLEMS;
    return { ok: false, problems: rest > 0 ? [...problems.slice(0, MOST_PROBLEMS), `and ${rest} more.`] : problems };
  }
  const notices = [
    ...(migrated.from < VERSION ? [`Brought forward from version ${migrated.from} to ${VERSION}.`] : []),
    ...dropped.map((path) => `${path}: left out; a key of this name is not taken.`),
  ];
  return { ok: true, record: result.output, notices };
}

/** Reads the text of a file or a link. */
export function readText(text: string): Reading {
  if (text.length > LARGEST) {
    const size = (text.length / 1e6).toFixed(1);
    return { ok: false, problems: [`This is ${size} MB; a frame record is at most ${LARGEST / 1e6} MB.`] };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, problems: ['This is no JSON text, so no frame record.'] };
  }
  return readValue(value);
}

/** The record as a file. */
export const fileText = (record: FrameRecord): string => `${JSON.stringify(record, null, 2)}\n`;

/** A name for the file: `dunnock-d.frame.json`. */
export const fileName = ({ name, revision }: FrameRecord): string =>
  `${
    `${name} ${revision}`
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'frame'
  }.frame.json`;
