"""The one numeric type of the core: a float, or an array of floats of one shape."""

from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Column: TypeAlias = NDArray[np.float64]
Number: TypeAlias = float | Column
