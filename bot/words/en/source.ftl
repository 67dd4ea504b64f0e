### How well a source is known, as it stands beside it.

source-standard = standard
source-paper = paper
source-handbook = handbook
source-dataset = dataset
source-derivation = derivation
source-common_practice = common practice
source-memory = memory
