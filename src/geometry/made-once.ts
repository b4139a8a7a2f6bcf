// An edit changes one thing of a design and leaves the others the very objects that they were (`reread-line.ts`): what has
// been made of those need not be made again. For data that never changes, so that nobody can tell the difference.

/** The same work, done once for each subject, or for all with one identity; its result is let go with that. */
export const madeOnce = <Subject extends object, Result>(
  work: (subject: Subject) => Result,
  identity: (subject: Subject) => object = (subject) => subject,
): ((subject: Subject) => Result) => {
  const once = madeOnceAs(identity, (subject: Subject) => work(subject));
  return (subject) => once(subject, NOTHING);
};

/**
 * The same work, done once for each subject as long as all that is given with it is the very same too. Of each subject the
 * last result is kept and no other.
 */
export const madeOnceWith = <Subject extends object, Given extends object, Result>(
  work: (subject: Subject, given: Given) => Result,
): ((subject: Subject, given: Given) => Result) => madeOnceAs((subject) => subject, work);

/** The same for all subjects with one identity: the work uses no more of them than what that stands for. */
export const madeOnceAs = <Subject extends object, Given extends object, Result>(
  identity: (subject: Subject) => object,
  work: (subject: Subject, given: Given) => Result,
): ((subject: Subject, given: Given) => Result) => {
  const kept = new WeakMap<object, { readonly given: Given; readonly result: Result }>();
  return (subject, given) => {
    const key = identity(subject);
    const before = kept.get(key);
    if (before !== undefined && areSame(before.given, given)) return before.result;
    const result = work(subject, given);
    kept.set(key, { given, result });
    return result;
  };
};

const NOTHING = {};

/** Of two records with the same keys: whether each value is the very same. */
const areSame = <Given extends object>(one: Given, other: Given): boolean => {
  for (const key in one) if (!Object.is(one[key], other[key])) return false;
  return true;
};

/** Lists that are made anew each time: of each subject the list before, where all that is in the new one is the same. */
export const steadyLists = <Subject extends object, Item>(
  isSame: (one: Item, other: Item) => boolean,
): ((subject: Subject, list: readonly Item[]) => readonly Item[]) => {
  const kept = new WeakMap<Subject, readonly Item[]>();
  return (subject, list) => {
    const before = kept.get(subject);
    const isAsBefore =
      before?.length === list.length && list.every((item, index) => isSame(item, before[index]!));
    if (isAsBefore) return before;
    kept.set(subject, list);
    return list;
  };
};
