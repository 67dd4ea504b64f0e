### Facts: FileRefused
### Why a file is not taken back.

file-head = I cannot take this file back.
file-at = { $where ->
    [none] The file
   *[some] { $where }
  }
file-huge = It is larger than two megabytes, which no export is.
file-no_json = It is no JSON, or its end is missing.
file-missing = { file-at } is missing.
file-unknown = I do not know what { file-at } is.
file-no_word = { file-at }: it is none of the words that it may be.
file-other = { file-at }: { $detail }.
file-step = Take an export as it was made: { $example }
