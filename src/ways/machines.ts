/**
 * A brake made ready for the checks, kept while only the part changes: closing in on a limit asks for it again and again.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { Mm } from "../units/quantity.ts";

export class Machines {
  private last: { readonly machine: Machine; readonly thicknessMm: Mm } | undefined;

  of(brake: Brake, thicknessMm: Mm): Machine {
    if (this.last?.machine.brake === brake && this.last.thicknessMm === thicknessMm) return this.last.machine;
    const machine = new Machine(brake, thicknessMm);
    this.last = { machine, thicknessMm };
    return machine;
  }
}
