// What a disk says when it refuses, in plain words. Anything that is not a disk's refusal stays a bug and is thrown on.

const WORDS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EDQUOT: "your share of the disk is used up",
  EROFS: "the disk is read-only",
  EACCES: "you have no permission there",
  EPERM: "the system does not allow it",
  EBUSY: "another program is using it",
  ENOTDIR: "a file stands where a folder is needed",
  EISDIR: "it is a folder, not a file",
  EEXIST: "something else is already there",
  ENOTEMPTY: "another program is writing there",
  ENOENT: "it is not there",
  ENAMETOOLONG: "the name is too long for the disk",
  EXDEV: "it is a disk of its own: name a folder inside it",
  EMFILE: "too many files are open",
  ELOOP: "its links lead in a circle",
  EIO: "the disk has failed",
  EINVAL: "the system can't take this name",
};

/** Null where the error is not the disk's. */
const diskTrouble = (error: unknown): string | null => {
  if (!(error instanceof Error) || !("code" in error) || typeof error.code !== "string")
    return null;
  return WORDS[error.code] ?? null;
};

/** Runs a piece of disk work; a refusal of the disk comes back as words. */
export const attempt = <Result>(
  work: () => Result,
):
  | { readonly kind: "done"; readonly result: Result }
  | { readonly kind: "trouble"; readonly why: string } => {
  try {
    return { kind: "done", result: work() };
  } catch (error) {
    const why = diskTrouble(error);
    if (why === null) throw error;
    return { kind: "trouble", why };
  }
};
