"""The types of the core: a number or a column of numbers, and whether a rule holds for each."""

from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Column: TypeAlias = NDArray[np.float64]
Number: TypeAlias = float | Column
# Of a comparison: of two floats a bool, of a numpy scalar its own kind, of a column a column.
Truth: TypeAlias = bool | np.bool_ | NDArray[np.bool_]
# A word of a closed list, such as a grade; of a column a column of them.
Token: TypeAlias = str | NDArray[np.str_]
