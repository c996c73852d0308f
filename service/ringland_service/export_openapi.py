"""Print the OpenAPI document: ``python -m ringland_service.export_openapi``."""

import json
import sys

from ringland_service.api.openapi.document import document


def main() -> None:
    """Write the document to standard output."""
    sys.stdout.write(json.dumps(document(), ensure_ascii=False, indent=1) + "\n")


if __name__ == "__main__":
    main()
