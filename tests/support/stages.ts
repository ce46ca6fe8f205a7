/** The folders of src/ that work one after the other; each imports those before it alone. */
export const stages = [
  'model',
  'read',
  'validate',
  'edit',
  'compute',
  'compose',
  'answers',
  'render',
  'print',
  'write',
  'cli',
]
