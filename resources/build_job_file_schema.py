"""Write resources/job-file.schema.json from the forms; run after a form changed."""

import json

from chargebench.jobfile import schema
from chargebench.resource import resource

if __name__ == "__main__":
    path = resource("job-file.schema.json")
    path.write_text(json.dumps(schema(), ensure_ascii=False, indent=1) + "\n", encoding="utf-8")
    print(f"Wrote {path}")
