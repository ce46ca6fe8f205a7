// The script of the lessons.
export {}
