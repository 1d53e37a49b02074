/** A fault of the call or of the machine, told to the user in one line; exit code 2. Not a fault of the text. */
export class Complaint extends Error {
  override readonly name = 'Complaint'
}

/** Whether an error is a complaint, also of a verb that is built apart and has a class of its own. */
export const isComplaint = (error: unknown): error is Complaint =>
  error instanceof Error && error.name === 'Complaint'

/** What went wrong with a file or folder, in words. */
export function inWords(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  switch (code) {
    case 'ENOENT':
      return "it isn't there"
    case 'EACCES':
    case 'EPERM':
      return 'permission is denied'
    case 'EISDIR':
      return 'it is a folder'
    case 'ENOTDIR':
    case 'EEXIST':
      return 'a part of its path is no folder'
    case 'ENOSPC':
      return 'the disk is full'
    case 'EDQUOT':
      return 'the disk quota is used up'
    case 'EROFS':
      return 'the disk is read-only'
    case 'ELOOP':
      return 'its links go round in a ring'
    case 'ENAMETOOLONG':
      return 'its name is too long'
    case 'EMFILE':
    case 'ENFILE':
      return 'too many files are open'
    default:
      return error instanceof Error ? error.message : String(error)
  }
}
