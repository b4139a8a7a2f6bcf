// Looks values up in the instances of a STEP file: what a reference leads to, and whether it is what it must be. What leads
// nowhere or to something else is written down once in words.

import type { StepEntity, StepInstances, StepValue } from "./step-instances.ts";

export interface StepLookUp {
  /** In the order of the file. */
  all(name: string): readonly { readonly number: number; readonly entity: StepEntity }[];
  /** null where there is none of this name under the number. */
  named(number: number | null, name: string): StepEntity | null;
  oneOf(number: number | null, names: readonly string[]): StepEntity | null;
  reference(entity: StepEntity | null, at: number): number | null;
  references(entity: StepEntity | null, at: number): readonly number[];
  /** NaN where it is no number. */
  number(entity: StepEntity, at: number): number;
  numbers(entity: StepEntity, at: number): readonly number[];
  text(entity: StepEntity, at: number): string;
  isTrue(entity: StepEntity, at: number): boolean;
  strangers(): readonly string[];
}

export const stepLookUp = (instances: StepInstances["instances"]): StepLookUp => {
  const strangers = new Set<string>();
  const oneOf = (number: number | null, names: readonly string[]): StepEntity | null => {
    if (number === null) return null;
    const entities = instances.get(number) ?? [];
    const found = entities.find(({ name }) => names.includes(name));
    if (found !== undefined) return found;
    const what = entities.map(({ name }) => name).join(" and ");
    strangers.add(
      what === "" ? `instance #${number} is not there` : `${what} where ${names[0]} was looked for`,
    );
    return null;
  };
  const itemsAt = (entity: StepEntity | null, at: number): readonly StepValue[] => {
    const value = entity?.values[at];
    return value?.kind === "list" ? value.items : [];
  };
  return {
    all: (wanted) =>
      [...instances].flatMap(([number, entities]) =>
        entities.filter(({ name }) => name === wanted).map((entity) => ({ number, entity })),
      ),
    named: (number, name) => oneOf(number, [name]),
    oneOf,
    reference: (entity, at) => {
      const value = entity?.values[at];
      if (value?.kind === "reference") return value.number;
      if (entity !== null) strangers.add(`${entity.name} without what it stands on`);
      return null;
    },
    references: (entity, at) =>
      itemsAt(entity, at).flatMap((value) => (value.kind === "reference" ? [value.number] : [])),
    number: (entity, at) => numberOf(entity.values[at]),
    numbers: (entity, at) => itemsAt(entity, at).map(numberOf),
    text: (entity, at) => {
      const value = entity.values[at];
      return value?.kind === "text" ? value.text : "";
    },
    isTrue: (entity, at) => {
      const value = entity.values[at];
      return value?.kind === "word" && value.word === "T";
    },
    strangers: () => [...strangers],
  };
};

const numberOf = (value: StepValue | undefined): number =>
  value?.kind === "number" ? value.value : Number.NaN;
