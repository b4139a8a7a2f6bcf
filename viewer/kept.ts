// What is opened once and kept, where it opens: a failure is told to whoever waited for it and then forgotten, so that the next
// one who asks opens anew.

export const kept = <Thing>(open: () => Promise<Thing>): (() => Promise<Thing>) => {
  let opened: Promise<Thing> | null = null;
  return () => {
    if (opened !== null) return opened;
    const opening = open();
    opened = opening;
    opening.catch(() => {
      if (opened === opening) opened = null;
    });
    return opening;
  };
};
