"""The words that requests and answers share.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from typing import Literal, TypeAlias

Defaults: TypeAlias = Literal["on", "off"]
Rule: TypeAlias = Literal["guard_2u", "guard_1645u", "simple"]
RuleApplied: TypeAlias = Literal["guard_2u", "guard_1645u", "simple", "interval_95"]
Standing: TypeAlias = Literal["maker", "common_practice", "standard", "computed"]
Units: TypeAlias = Literal["metric", "us"]
VerdictWord: TypeAlias = Literal["pass", "fail", "too_close_to_call", "not_judged"]
