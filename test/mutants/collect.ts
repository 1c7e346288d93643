/**
 * Stands in for vitest where the truths are bundled for the mutation run: `it` and `describe` only collect, `expect` is vitest's
 * own. A truth is one `it`; it throws where it is missed.
 */
import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";
import fc from "fast-check";
import { LEFT_OUT } from "./truthFiles.ts";

// A miss is a miss: no need to look for the smallest.
fc.configureGlobal({ endOnFailure: true });
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = chai.expect;

export interface Truth {
  readonly name: string;
  readonly run: () => unknown;
}

export const truths: Truth[] = [];

type Body<Case> = (...args: Case extends readonly unknown[] ? [...Case] : [Case]) => unknown;

const argsOf = (item: unknown): unknown[] => (Array.isArray(item) ? item : [item]);
const path: string[] = [];

/** As in vitest the body may come after options, which say nothing here. */
export function it(name: string, first: object | (() => unknown), second?: () => unknown): void {
  const full = [...path, name].join(" › ");
  const run = second ?? (first as () => unknown);
  if (!LEFT_OUT.test(full)) truths.push({ name: full, run });
}

it.each =
  <Case>(cases: readonly Case[]) =>
  (name: string, run: Body<Case>): void =>
    cases.forEach((item, i) => {
      it(`${name} #${i + 1}`, () => (run as (...args: unknown[]) => unknown)(...argsOf(item)));
    });

export function describe(name: string, body: () => void): void {
  path.push(name);
  body();
  path.pop();
}

describe.each =
  <Case>(cases: readonly Case[]) =>
  (name: string, body: Body<Case>): void =>
    cases.forEach((item, i) => {
      describe(`${name} #${i + 1}`, () => (body as (...args: unknown[]) => void)(...argsOf(item)));
    });

export const test = it;
