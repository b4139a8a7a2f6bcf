// From a path as a design writes it to a path from the root. Pure: no file is looked at.
// Paths go up with `../` as far as the root and never above it, and mean the same on every system.

export type ResolvedInclude =
  | { readonly kind: "resolved"; readonly path: string }
  | { readonly kind: "refused"; readonly why: string };

/** `file` is the path of the naming file from the root, with forward slashes; `written` is what it names. */
export const resolveInclude = (file: string, written: string): ResolvedInclude => {
  const why = refusal(written);
  if (why !== null) {
    return { kind: "refused", why };
  }
  const folders = file.split("/").slice(0, -1);
  for (const step of written.split("/")) {
    if (step === "..") {
      if (folders.length === 0) {
        return { kind: "refused", why: "it leads above the folder of the design" };
      }
      folders.pop();
    } else if (step !== "." && step !== "") {
      folders.push(step);
    }
  }
  const path = folders.join("/");
  return path === ""
    ? { kind: "refused", why: "it names a folder, not a file" }
    : { kind: "resolved", path };
};

const LONGEST_PATH = 400;

const refusal = (written: string): string | null => {
  if (written.length > LONGEST_PATH) {
    return `it is longer than ${LONGEST_PATH} characters`;
  }
  if (/\p{Cc}/u.test(written)) {
    return "it holds a control character";
  }
  if (written.includes("\\")) {
    return "write forward slashes, which work on every system";
  }
  if (/^[a-z][a-z0-9+.-]*:/i.test(written)) {
    return "it begins with a drive letter or an address; name a file inside the folder of the design";
  }
  if (written.startsWith("/") || written.startsWith("~")) {
    return "it does not begin at this file; write it relative to this file";
  }
  if (written.split("/").some(isTroubleOnWindows)) {
    return "a part of it can't be a file name on every system";
  }
  return written.endsWith("/") || written.trim() === "" ? "it names a folder, not a file" : null;
};

/** Characters, endings and device names that Windows refuses (Microsoft, "Naming Files, Paths, and Namespaces"). */
const isTroubleOnWindows = (step: string): boolean =>
  step !== "." &&
  step !== ".." &&
  (/[<>:"|?*]/.test(step) ||
    /[. ]$/.test(step) ||
    /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\.|$)/i.test(step));
