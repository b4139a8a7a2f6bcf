// Test files that run in a process of their own. All others share one with those before them: loading the program anew takes
// most of them longer than what they test.

/** Folders end in a slash. */
export const ALONE: readonly string[] = [
  // The page keeps its state in its modules.
  "tests/viewer/",
  "tests/console-view/",
  // A browser, whole packs and solids take memory by the hundred megabytes: it is given back with the process.
  "tests/browser/",
  "tests/documents/",
  "tests/examples/",
  "tests/printed/",
  "tests/project/",
  "tests/solids/",
  // Memory is measured, or time.
  "tests/design/refused.test.ts",
  "tests/fit/verdict.test.ts",
  // A module is replaced.
  "tests/pack/cut-files.test.ts",
];

/** What a file does that others in its process would feel: it must run alone. */
export const TOUCHES_OTHERS =
  /\bvi\.(?:mock|doMock|hoisted|resetModules|stubGlobal|stubEnv|useFakeTimers)\(|\bprocess\.chdir\(|\bopenGaugedKernel\(/;
