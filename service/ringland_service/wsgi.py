"""The WSGI object: ``gunicorn ringland_service.wsgi:app``."""

from ringland_service.api.app import create_app

app = create_app()
