// One finding an entry: what is wrong with a row's part is wrong with each of its members, and said once, with the count.

import type { Finding } from "../diagnostics/finding.ts";
import type { PlacedComponent } from "../layout/panel-layout.ts";

export const onePerEntry = (
  components: readonly PlacedComponent[],
  judgeOne: (component: PlacedComponent) => Finding | null,
): readonly Finding[] => {
  const kept = new Map<string, Finding>();
  for (const component of components) {
    const found = judgeOne(component);
    if (found === null) continue;
    const first = kept.get(component.entry);
    kept.set(
      component.entry,
      first === undefined ? found : { ...first, suppressed: first.suppressed + 1 },
    );
  }
  return [...kept.values()];
};
