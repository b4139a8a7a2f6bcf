// What stands behind an edited line is only moved by it: it says what it said, a little further on. One object stands for all
// that was read from the same words, so that what owes nothing to their place in the text need not be made again.

const ORIGINS = new WeakMap<object, object>();

/** The same for two things if one was read where the other had been moved to; else the thing itself. */
export const originOf = (thing: object): object => ORIGINS.get(thing) ?? thing;

/** `thing` is made of what stands for `from` and of nothing else that an edit could change. */
export const fromSameWords = <Thing extends object>(thing: Thing, from: object): Thing => {
  ORIGINS.set(thing, originOf(from));
  return thing;
};
